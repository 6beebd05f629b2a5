// The floor of a key press: a ratio by hand, with no units, no checks, no words. It is measured, never shipped.
const amount = document.getElementById("amount");

amount.addEventListener("input", () => {
  const total = Number(amount.value.replace(",", "."));
  document.getElementById("a").textContent = `${((total * 3) / 4).toFixed(1)} g`;
  document.getElementById("b").textContent = `${(total / 4).toFixed(1)} g`;
});
