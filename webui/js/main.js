// Starts the page: the engine, the screen, and what keeps it all for a shop without signal.
import { startEngine } from "./engine.js";
import { pairs } from "./form.js";
import { remember } from "./memory.js";
import { startNavigation } from "./navigate.js";
import { startOffline } from "./offline.js";
import { mount } from "./views/screen.js";

const root = new URL("../../../", import.meta.url);

const show = () => {
  const main = document.querySelector("[data-main]");
  if (main.querySelector("[data-form]")) mount(document.documentElement.dataset.screen, main);
};

const save = () => {
  const form = document.querySelector("[data-form]");
  if (form) remember(document.documentElement.dataset.screen, pairs(form));
};

startEngine().catch(() => {}); // the first question says so, at the field
show();
startNavigation(show);
startOffline(root, save);
