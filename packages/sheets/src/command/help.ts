/** What a weaver reads who has never used the command; 80 columns. */
export const HELP = `thrum-sheets: the plan of a warp as a live workbook (.xlsx)

  thrum-sheets job.yaml --to plan.xlsx             write the workbook
  thrum-sheets job.yaml --to plan.xlsx --replace   over an older one
  thrum-sheets job.yaml > plan.xlsx                or to standard output
  thrum-sheets --help                              this page

For the job file write - to read it from standard input. It is the file that
thrum plan reads: @thrum/plan tells what stands in it, and thrum check job.yaml
whether anything in it is wrong.

In the workbook change the yellow cells: pieces, lengths, losses, the reed, the
yarns, the stripes. Every other number is a formula and follows.

Exit codes
  0  done
  1  the job file has faults; nothing was written
  2  the command was not understood
  3  written, but the warp cannot be woven as it is planned: the plan says why
  4  a file could not be read or written
`;
