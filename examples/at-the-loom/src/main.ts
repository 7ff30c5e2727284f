import { createApp } from "vue";
import App from "./App.vue";
import "./theme.css";
import "./parts/loom.css";

createApp(App).mount("#app");

// A newer version waits until the app is next opened: nothing is taken from under a hand.
if (import.meta.env.PROD && "serviceWorker" in navigator) {
  void navigator.serviceWorker.register("./sw.js").catch(() => undefined);
}
