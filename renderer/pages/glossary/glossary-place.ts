/** Where the glossary was opened from, so that one key goes back there: the form, at the field. */
export const glossaryPlace = { from: '' }
