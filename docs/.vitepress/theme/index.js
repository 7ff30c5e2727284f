import Layout from "./Layout.vue";
import LiveFormula from "./LiveFormula.vue";
import StripePage from "./StripePage.vue";
import "./style.css";

export default {
  Layout,
  enhanceApp({ app }) {
    app.component("LiveFormula", LiveFormula);
    app.component("StripePage", StripePage);
  },
};
