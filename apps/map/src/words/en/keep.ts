/** Texts of the keeping, opening and sharing of sites. */
export const keep = {
  unnamed: 'Site without a name',
  newName: (n: number) => (n === 1 ? 'New site' : `New site ${n}`),
  copyName: (name: string) => `${name} (copy)`,
  otherTabName: (name: string) => `${name} (from the other tab)`,
  foundName: (name: string) => `${name} (found again)`,
  tooDeep: 'it is nested too deeply to be a site',

  step: { copy: 'Keep as a copy', rename: 'Rename the site' },

  undo: (label: string | null) => (label === null ? 'Undo' : `Undo: ${label}`),
  redo: (label: string | null) => (label === null ? 'Redo' : `Redo: ${label}`),
  history: 'Changes',

  picker: { kept: 'On this device', examples: 'Examples' },

  /** Beside the name of the site, as short as can be. */
  saveState: {
    example: 'Example',
    'as-in-file': 'As in the file',
    'view-only': 'To look at only',
    saving: 'Saving…',
    saved: 'Saved on this device',
    unsaved: 'Not saved',
    'stands-back': 'Not saved here',
  },

  unsaved: {
    title: (name: string) => `“${name}” is not saved.`,
    why: {
      full: 'This device has no room left for the page. Free some space, or save the site as a file.',
      blocked:
        'The browser does not let this page keep anything, as in a private window. Save the site as a file before you close it.',
      broken: 'The browser could not write it. Save the site as a file to be safe.',
    },
    saveFile: 'Save as a file',
    again: 'Try again',
  },

  standsBack: {
    'open-elsewhere': 'This site is open in another tab. What you change here is not saved until you choose.',
    'taken-over': 'Another tab has taken this site over. What you change here is not saved until you choose.',
    'changed-elsewhere':
      'This site was changed in another tab. What you change here is not saved until you choose.',
    takeOver: 'Work on it here',
    asCopy: 'Keep this as a copy',
  },

  older: (name: string) =>
    `The last save of “${name}” could not be read. This is the one before it; nothing else is lost.`,
  close: 'Close',

  newVersion: { ready: 'A new version of this page is ready.', use: 'Use it now' },

  panel: {
    title: 'Sites on this device',
    nothing: 'No site is kept here yet. Begin one, open a file, or change an example: it is kept by itself.',
    cannot: 'The browser does not let this page keep sites, as in a private window.',
    begin: 'New site',
    saveFile: 'Save as a file',
    saveHint: 'Save the open site as a GeoJSON file',
    private:
      'Sites stay on this device. Nothing is sent anywhere. A file is the way to move one, or to be safe.',
    counts: (lines: number, trees: number) =>
      `${lines} ${lines === 1 ? 'line' : 'lines'}, ${trees} ${trees === 1 ? 'tree' : 'trees'}`,
    changed: (moment: Date) => moment.toLocaleString('en', { dateStyle: 'medium', timeStyle: 'short' }),
    copyOf: 'your copy of an example',
    isOpen: 'open now',
    more: (name: string) => `More for ${name}`,
    moreShort: 'More',
    rename: 'Rename',
    name: 'Name',
    keepName: 'Keep this name',
    cancel: 'Cancel',
    copy: 'Copy',
    remove: 'Delete',
    removed: (name: string) => `“${name}” is deleted.`,
    restore: 'Bring it back',
    bin: (n: number) => `Deleted in the last 30 days: ${n}`,
    examples: 'Examples',
    examplesHint: 'Invented lots to try things on. The first change makes a copy of your own.',
    exampleText: {
      'corner-lot': 'An old elm beside a yard drain',
      'french-drain-plan': 'A French drain planned beside an oak',
      'small-campus': 'Many lines and many trees',
    },
  },
};
