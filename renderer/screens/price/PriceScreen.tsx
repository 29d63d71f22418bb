export default function PriceScreen() {
  return null
}
