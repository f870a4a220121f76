/** What is wrong with a library file, as data. */
export type FileFault =
  | { readonly code: 'not-json' }
  | { readonly code: 'empty-file' }
  | { readonly code: 'not-a-library' }
  | { readonly code: 'newer-version'; readonly version: number }
  | { readonly code: 'missing' }
  | { readonly code: 'blank' }
  | { readonly code: 'twice' }
  | { readonly code: 'not-one-of'; readonly choices: readonly string[] }
  | { readonly code: 'overruled-twice' }
  | { readonly code: 'chosen-twice' }
  | { readonly code: 'wrong-kind'; readonly expected: string }

const kinds: Readonly<Record<string, string>> = {
  string: 'a text in quotation marks',
  number: 'a number',
  int: 'a whole number',
  array: 'a list in square brackets',
  object: 'an object in braces',
  record: 'an object in braces',
  boolean: 'true or false',
}

/** Says what is wrong with a file at the place named beside it. */
export const wordFileFault = (fault: FileFault): string => {
  switch (fault.code) {
    case 'empty-file':
      return 'the file is empty; choose a file that was exported from Lignebook'
    case 'not-json':
      return 'the text is not JSON from there on; look for a comma, quotation mark or bracket'
    case 'not-a-library':
      return 'it does not begin as a Lignebook file does, with "lignebook": 1'
    case 'newer-version':
      return `it was written in form ${fault.version} and this version reads form 1; open it with a newer Lignebook`
    case 'missing':
      return 'this is missing; fill it in'
    case 'blank':
      return 'this is blank; fill it in'
    case 'twice':
      return 'this stands twice in one object; leave one of the two'
    case 'not-one-of':
      return `one of ${fault.choices.map((choice) => `"${choice}"`).join(', ')} is expected here`
    case 'overruled-twice':
      return 'one proof is overruled twice; leave one of the two'
    case 'chosen-twice':
      return 'two readings are chosen here, and only one can be; leave "chosen" at one of them'
    case 'wrong-kind':
      return `${kinds[fault.expected] ?? 'a number, a text, or a reading with "printed"'} is expected here`
  }
}
