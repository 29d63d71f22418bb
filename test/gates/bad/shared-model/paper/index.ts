import pdfmake from 'pdfmake'
export const paper = pdfmake
