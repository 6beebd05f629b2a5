// Sends back what comes, by the way that is asked for.
const channel = new BroadcastChannel("way");

self.addEventListener("message", ({ data: [way, text] }) => (way === "channel" ? channel : self).postMessage(text));
