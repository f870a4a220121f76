/** Share of a figure by which two that do not meet within their printed rounding may differ from measuring and wear: doubtful, not wrong. Our choice. */
export const measuringShare = 0.01
