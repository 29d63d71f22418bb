export default function CutsScreen() {
  return null
}
