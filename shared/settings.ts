/**
 * The settings, once: the manifest, the server's defaults and the reference all follow this list.
 */

/** The section under which editors keep the settings. */
export const SECTION = 'measureTwice';

export interface Setting {
  readonly values: readonly string[];
  readonly default: string;
  /** One sentence for the editor's settings page. */
  readonly description: string;
  /** What each value means, in the order of `values`. */
  readonly meanings: readonly string[];
}

export const SETTINGS = {
  unaccounted: {
    values: ['off', 'hint'],
    default: 'off',
    description: 'Whether numbers that no figure accounts for are shown in the text.',
    meanings: [
      'They are counted in the status bar only.',
      'Each of them is marked with a hint, so that you see what nobody has checked.',
    ],
  },
  'trace.server': {
    values: ['off', 'messages', 'verbose'],
    default: 'off',
    description: 'Logs the messages between the editor and the proofreader, for finding faults in either.',
    meanings: [
      'Nothing is logged.',
      'The names of the messages are logged.',
      'The messages are logged in full.',
    ],
  },
} as const satisfies Record<string, Setting>;

/** The settings that the server acts on. */
export interface Settings {
  readonly unaccounted: (typeof SETTINGS.unaccounted.values)[number];
}

export const DEFAULT_SETTINGS: Settings = { unaccounted: SETTINGS.unaccounted.default };

/** The settings in whatever a client sends as its section; what is missing or unknown keeps its default. */
export function readSettings(section: unknown): Settings {
  const given = typeof section === 'object' && section !== null ? (section as Record<string, unknown>) : {};
  const known = SETTINGS.unaccounted.values.find((value) => value === given.unaccounted);
  return { unaccounted: known ?? DEFAULT_SETTINGS.unaccounted };
}
