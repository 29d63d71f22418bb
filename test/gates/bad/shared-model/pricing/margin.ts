export const margin = 0.4
