import { defineAsyncComponent } from "vue";
import Layout from "./Layout.vue";
import LiveFormula from "./LiveFormula.vue";
import "./style.css";

export default {
  Layout,
  enhanceApp({ app }) {
    app.component("LiveFormula", LiveFormula);
    // What stands on one page only is loaded with it.
    for (const [name, load] of Object.entries({
      CountConverter: () => import("./CountConverter.vue"),
      FormulaFilter: () => import("./FormulaFilter.vue"),
      StripePage: () => import("./StripePage.vue"),
    })) {
      app.component(name, defineAsyncComponent(load));
    }
  },
};
