/** The tray that was brought in last, to be looked at first. */
export const springsPlace: { tray: string | null } = { tray: null }
