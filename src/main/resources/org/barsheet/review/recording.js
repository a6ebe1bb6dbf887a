/** A recording of the viewer's own as a source of time. It is read from the disk, never sent. */

const recording = { sound: null, name: "", firstFrame: film.musicStart };

/** Takes a file that the viewer has chosen; the one before falls silent. */
recording.take = function (file) {
  if (this.sound) {
    this.stop();
    URL.revokeObjectURL(this.sound.src);
  }
  this.sound = new Audio(URL.createObjectURL(file));
  this.sound.preload = "auto";
  this.name = file.name;
};

/** Film time of its first sample. */
recording.offset = function () {
  return secondsAtFrame(this.firstFrame);
};

recording.start = function (seconds, speed) {
  silence.start(seconds, speed);
  this.sound.playbackRate = speed;
  this.running = false;
  this.begin(seconds);
};

/** Before its first sample and after its last the film goes on without it. */
recording.begin = function (seconds) {
  const into = seconds - this.offset();
  if (into >= 0 && !(into >= this.sound.duration)) {
    this.running = true;
    this.sound.currentTime = into;
    this.sound.play().catch(() => {
      this.running = false;
      announce("This browser does not play " + this.name + ".");
    });
  }
};

recording.stop = function () {
  this.running = false;
  this.sound.pause();
};

recording.seconds = function () {
  if (this.running && !this.sound.ended) {
    const seconds = this.offset() + this.sound.currentTime;
    silence.start(seconds, this.sound.playbackRate);
    return seconds;
  }
  const seconds = silence.seconds();
  if (!this.running && seconds >= this.offset() && !this.sound.ended) {
    this.begin(seconds);
  }
  return seconds;
};
