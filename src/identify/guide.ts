/** How to measure a screw: short, drawn in text, at most 60 columns wide. */
export const HOW_TO_MEASURE = `HOW TO MEASURE A SCREW

Clean it. Measure where it was not used, in three places,
turned in between.

1 Hand        Hold the screw upright and look at the front.

              right  / / /        left  \\ \\ \\
                    / / /                \\ \\ \\

              Threads rising to the right are right-hand.
              --hand right

2 Crests      flat:   __/  \\__/  \\__   trapezoidal or Acme
              sharp:  /\\/\\/\\/\\/\\      metric or unified V
              --crest flat

3 Major       Caliper blades across the crests. Give every
              reading.

              |<---- major ---->|
              --major 7.92,7.94,7.91

4 Pitch       From an edge to the same edge, ten pitches on.
              Count gaps, not crests: the first crest is
              number 0.

                0   1   2   3   4   5   6   7   8   9  10
               _|  _   _   _   _   _   _   _   _   _  _|
              / |\\/ \\_/ \\_/ \\_/ \\_/ \\_/ \\_/ \\_/ \\_/ \\/ |\\
                |<------------ length over 10 --------->|
              --crests 10=20.05

5 Lead        Mark screw and nut, turn the nut ten whole
              turns, measure how far it went. Lead over
              pitch is the number of starts, always whole.
              --travel 10=80.1

6 Starts      Look at the cut end: count the grooves that
              begin there.
              --starts 4

7 Root        Blades down into the grooves; a thin wire
              helps. Less exact.
              --minor 5.4

8 Wires       Three equal wires, two on one side, one on the
              other. The best wire is 0.52 of the pitch (V
              thread: 0.58). Tells worn flanks.

                   o   o          wires in the grooves
                 \\_/ \\_/ \\
                 ----------
                 / \\_/ \\_/
                     o
                 measure across all three
              --wires 1.0=8.31

A caliper in a steady hand is good for 0.03 mm; say
otherwise with --uncertainty 0.05.
`;
