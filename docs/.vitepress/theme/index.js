import { defineAsyncComponent } from "vue";
import HomeSheets from "./HomeSheets.vue";
import HomeWays from "./HomeWays.vue";
import Layout from "./Layout.vue";
import LiveFormula from "./live/LiveFormula.vue";
import Outside from "./Outside.vue";
import "./style.css";

export default {
  Layout,
  enhanceApp({ app }) {
    for (const [name, part] of Object.entries({ HomeSheets, HomeWays, LiveFormula, Outside }))
      app.component(name, part);
    // What stands on one page only is loaded with it.
    for (const [name, load] of Object.entries({
      CountConverter: () => import("./CountConverter.vue"),
      RowFilter: () => import("./RowFilter.vue"),
      StripePage: () => import("./stripes/StripePage.vue"),
    })) {
      app.component(name, defineAsyncComponent(load));
    }
  },
};
