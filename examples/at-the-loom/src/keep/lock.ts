/** One window writes to a job. Calls back when the job is taken by another window. */
export interface Held {
  readonly isMine: boolean;
  readonly letGo: () => void;
}

type Locks = Pick<LockManager, "request">;

/** Takes the job if no other window has it, or takes it over; without locks every window writes. */
export function hold(
  job: string,
  {
    steal = false,
    onTaken,
    locks = navigator.locks,
  }: { steal?: boolean; onTaken: () => void; locks?: Locks | undefined },
): Promise<Held> {
  return new Promise((resolve) => {
    let letGo: () => void = () => undefined;
    const until = new Promise<void>((done) => {
      letGo = done;
    });
    if ((locks as Locks | undefined) === undefined) {
      resolve({ isMine: true, letGo });
      return;
    }
    const options = steal ? { steal: true } : { ifAvailable: true };
    locks
      .request(`thrum:${job}`, options, (lock) => {
        resolve({ isMine: lock !== null, letGo });
        return lock === null ? undefined : until;
      })
      .catch(() => {
        // Taken over by another window, or refused altogether.
        resolve({ isMine: true, letGo });
        onTaken();
      });
  });
}
