export const width = window.innerWidth
export const home = process.cwd()
export const node = document.createElement('canvas')
