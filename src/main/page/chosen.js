/** The performer who reads. */

import { film } from "./film.js";
import { reader } from "./reader.js";

export const performer = { chosen: 0 };

/** When the performer chosen is seen; never unless a performer reads. */
export const seenByReader = () => (reader.view === "performer" ? film.appearances.filter((each) => each.performer === performer.chosen) : []);
