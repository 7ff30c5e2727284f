/** What a weaver reads who has never used the command; 80 columns. */
export const HELP = `thrum: one warp, from the old thrums to the label

Write what stands on your loom and what you want to weave into a job file, then
ask for the plan:

  thrum new > job.yaml                           a job to fill in, with a remark
                                                 on every line
  thrum check job.yaml                           is anything wrong in the file?
  thrum plan job.yaml                            the plan, as text to read here
  thrum plan job.yaml --as json                  all its data, for a program
  thrum plan job.yaml --as html --to plan.html   sheets to print and take to the
                                                 loom, in a file of that name
  thrum plan job.yaml --without workings         the sums at the back left out
  thrum plan job.yaml --to plan.txt --replace    text, over an older plan
  thrum compare job.yaml other.yaml              what if? only the figures that
                                                 the two plans do not share;
                                                 --as html a page of them
  thrum next job.yaml > next.yaml                the job after it, from what you
                                                 wrote under found
  thrum reconcile page.txt                       do the figures of a printed
                                                 project agree? one a line, as
                                                 warpLength: 5 2/3 yd
  thrum schema                                   the form of a job file, for an
                                                 editor that checks as you type
  thrum help                                     this page

For the job file write - to read it from standard input.

A job file is plain text, with amounts as you would write them:

  stripes:
    - 24 natural
    - 16 madder + pink         # both in the hand at once
    - 24 natural
  loom: { reed: 10 per inch, sley: 2 }
  pieces: [{ number: 9, finishedLength: 16 in, hemEachEnd: 3/4 in }]

Every key may be left out: what is not given is not reckoned, and the plan says
which key it waits for. What is wrong is listed all at once, each with its line,
its place and what to write instead.

Exit codes
  0  done
  1  the file has faults; nothing was planned or written
  2  the command was not understood
  3  planned, but the warp cannot be woven as it is planned: the plan says why,
     first of all
  4  a file could not be read or written
`;
