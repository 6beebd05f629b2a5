// The way through a worker and nothing else: the digit goes there and comes back, by the way that the address names. It is
// measured, never shipped.
const amount = document.getElementById("amount");
const way = location.hash.slice(1);
const worker = new Worker("back.js");
const channel = new BroadcastChannel("way");
const show = ({ data }) => { document.getElementById("b").textContent = `${data} g`; };

amount.addEventListener("input", () => worker.postMessage([way, amount.value]));
worker.addEventListener("message", show);
channel.addEventListener("message", show);
