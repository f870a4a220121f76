/** Share of a figure by which two may differ beyond their printed rounding from measuring and wear: doubtful, not wrong. Our choice. */
export const measuringShare = 0.01
