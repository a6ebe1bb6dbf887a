/** The page on the desk: the review page, and on top of it all that changes the plan. */

import { listenToMap } from "./artwork.js";
import "./motifs.js";
import { make, refuse } from "./panelform.js";
import "../main.js";
import { chooseTab } from "../reader.js";
import { buildAnswers } from "./answers.js";
import { buildBar } from "./bar.js";
import { listenToDrags } from "./dragging.js";
import { listenToDrops } from "./drawings.js";
import { listen } from "./live.js";
import { listenToSelections } from "./selecting.js";

buildAnswers();
buildBar();
listenToDrags();
listenToSelections();
listenToMap();
listenToDrops(make, refuse);
listen();
chooseTab("panel");
