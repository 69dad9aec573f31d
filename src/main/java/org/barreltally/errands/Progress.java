package org.barreltally.errands;

/** Is told how far a piece of work is, by whoever does it. */
public interface Progress {

  /** Nobody wants to know. */
  Progress UNWATCHED =
      new Progress() {
        @Override
        public void of(int steps) {}

        @Override
        public void done(int steps) {}
      };

  /** How many steps the work has: labels, chapters, lines. */
  void of(int steps);

  /** So many steps are done since the last time. */
  void done(int steps);
}
