import { ref } from "vue";

/** Whether all of the app is kept, so that it opens without a network. */
export const isReady = ref(false);

if ("serviceWorker" in navigator) {
  void navigator.serviceWorker.ready.then(() => {
    isReady.value = true;
  });
}
