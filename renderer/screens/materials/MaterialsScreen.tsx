export default function MaterialsScreen() {
  return null
}
