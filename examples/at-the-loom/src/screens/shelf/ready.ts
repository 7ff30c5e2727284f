import { ref } from "vue";

/** Whether all of the app is kept, so that it opens without a network. */
export const isReady = ref(false);
/** Whether a newer version has come, which waits until the app is next opened. */
export const isNewer = ref(false);

if ("serviceWorker" in navigator) {
  void navigator.serviceWorker.ready.then((registration) => {
    isReady.value = true;
    const look = (): void => {
      isNewer.value = registration.waiting !== null;
    };
    look();
    registration.addEventListener("updatefound", () => {
      registration.installing?.addEventListener("statechange", look);
    });
  });
}
