// All that is no part of the bundle: fetched from the second opening on, when the worker is there to keep it.
import "../kit/reference.late.js";
import "../phone/unheard.late.js";
import "../share/numbered.late.js";
import "../share/scan.late.js";
import "./knock.late.js";
