// Starts the engine before the page's other scripts are there: it takes longest, and waits for none of them.
import { startEngine } from "./engine.js";

startEngine().catch(() => {}); // the first question says so, at the field
