export const loose = (value: any) => value
export const sure = (value: string | null) => value!
