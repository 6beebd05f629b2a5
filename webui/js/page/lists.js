// Things side by side, as the page's language lists them. What is empty is left out.
import { t } from "./words.js";

const chained = (two) => (things) => things.filter(Boolean).reduce((one, more) => (one ? two({ one, more }) : more), "");
export const listed = chained(({ one, more }) => t("page-list", { one, more }));
export const apart = chained(({ one, more }) => t("page-list.apart", { one, more })); // where they hold commas
