/** The click over a source that has none of its own, laid out by the time that the source gives. */

import { makeTake, playClick } from "./orchestra.js";
import { clicks, filmSeconds, hush, indexAfter, lookAhead, sounding } from "./sounding.js";

const clicking = { timer: 0, take: null, before: 0 };

clicking.start = function (source, seconds, speed) {
  sounding.open();
  this.take = makeTake(sounding.orchestra);
  this.next = indexAfter(clicks, seconds);
  this.before = seconds;
  this.timer = window.setInterval(() => this.layOut(source, speed), 40);
};

/** A source that stands still, because its sound is still loading, gets no click yet. */
clicking.layOut = function (source, speed) {
  const now = source.seconds();
  const stands = now === this.before;
  this.before = now;
  if (stands) {
    return;
  }
  const { context } = sounding;
  const zero = context.currentTime - (context.outputLatency || 0) - now / speed;
  const until = context.currentTime + lookAhead();
  for (; this.next < clicks.length; this.next++) {
    const { start, downbeat } = clicks[this.next];
    const when = zero + filmSeconds(start) / speed;
    if (when > until) {
      break;
    }
    if (when >= context.currentTime) {
      playClick(this.take, when, downbeat);
    }
  }
};

clicking.stop = function () {
  window.clearInterval(this.timer);
  hush(this.take);
  this.take = null;
};

/** A source with the click over it. */
export function underClick(source) {
  return {
    start(seconds, speed) {
      source.start(seconds, speed);
      clicking.start(source, seconds, speed);
    },
    stop() {
      clicking.stop();
      source.stop();
    },
    seconds: () => source.seconds(),
  };
}
