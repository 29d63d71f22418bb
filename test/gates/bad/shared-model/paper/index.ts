import pdfmake from 'pdfmake'
export const paper = pdfmake
export { default as solver } from 'highs'
