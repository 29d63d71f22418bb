export default function SheetScreen() {
  return null
}
