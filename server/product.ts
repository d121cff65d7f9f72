/** The name and the version that the product says of itself. */
export { displayName as NAME, version as VERSION } from '../package.json';
