/** `measure-twice/remark`: the plugin for people who use remark. */
import { type RemarkOptions, remarkPlugin } from '../../core/report/remark.ts';
import { SHIPPED_REFERENCE } from '../command-line/shippedReference.ts';

export type { RemarkOptions };
export default remarkPlugin(SHIPPED_REFERENCE);
