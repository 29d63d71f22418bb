export default function BenchScreen() {
  return null
}
