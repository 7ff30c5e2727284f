import vue from "@vitejs/plugin-vue";
import { defineConfig } from "vite";
import { VitePWA } from "vite-plugin-pwa";

export default defineConfig({
  // Relative, so that the app runs from any folder of a site.
  base: "./",
  build: { target: "es2022", modulePreload: { polyfill: false } },
  worker: { format: "es" },
  plugins: [
    vue({ features: { optionsAPI: false } }),
    VitePWA({
      // A newer version waits until the app is next opened; a task is never taken from under a hand.
      registerType: "prompt",
      injectRegister: false,
      workbox: { globPatterns: ["**/*.{js,css,html,svg,png}"], cleanupOutdatedCaches: true },
      manifest: {
        id: "./",
        start_url: "./",
        scope: "./",
        name: "Plan a warp",
        short_name: "Thrum",
        description: "Plan a striped warp and be led through the work at the loom.",
        lang: "en-GB",
        display: "standalone",
        background_color: "#fbf8f1",
        theme_color: "#fbf8f1",
        icons: [
          { src: "icon-192.png", sizes: "192x192", type: "image/png" },
          { src: "icon-512.png", sizes: "512x512", type: "image/png" },
          { src: "icon-maskable.png", sizes: "512x512", type: "image/png", purpose: "maskable" },
        ],
      },
    }),
  ],
});
