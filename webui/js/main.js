// Starts the page: the engine, the screen, and what keeps it all for a shop without signal.
import { startEngine } from "./engine.js";
import { pairs } from "./form.js";
import { remember } from "./memory.js";
import { startNavigation } from "./navigate.js";
import { startOffline } from "./offline.js";
import { mount as pour } from "./views/pour.js";
import { mount as screen } from "./views/screen.js";

const VIEWS = { pour };

const root = new URL("../../../", import.meta.url);

const show = () => {
  const main = document.querySelector("[data-main]");
  const name = document.documentElement.dataset.screen;
  if (main.querySelector("[data-form]")) (VIEWS[name] ?? screen)(name, main);
};

const save = () => {
  const form = document.querySelector("[data-form]");
  if (form) remember(document.documentElement.dataset.screen, pairs(form));
};

startEngine().catch(() => {}); // the first question says so, at the field
show();
startNavigation(show);
startOffline(root, save);
