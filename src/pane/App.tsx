import type { ComponentType } from "preact";
import { useCallback, useState } from "preact/hooks";
import { EstimateScreen } from "./EstimateScreen";
import { Fetched } from "./Fetched";
import { Menu } from "./Menu";
import { HELP_FOLDER, type Screen, screens } from "./screens";
import { useArrival } from "./useArrival";

/** Screens that are fetched when they are first wanted: the add-in's first load stays small. */
const fetched = {
  jobRows: async () => (await import(/* webpackChunkName: "job-rows" */ "./jobRows/JobRowsScreen")).JobRowsScreen,
  rates: async () => (await import(/* webpackChunkName: "rates" */ "./rates/RatesScreen")).RatesScreen,
  papers: async () => (await import(/* webpackChunkName: "papers" */ "./papers/PapersScreen")).PapersScreen,
  check: async () => (await import(/* webpackChunkName: "check" */ "./check/CheckScreen")).CheckScreen,
  explain: async () => (await import(/* webpackChunkName: "explain" */ "./explain/ExplainScreen")).ExplainScreen,
  templates: async () =>
    (await import(/* webpackChunkName: "templates" */ "./templates/TemplatesScreen")).TemplatesScreen,
  copy: async () => (await import(/* webpackChunkName: "copy" */ "./copy/CopyScreen")).CopyScreen,
  help: async () => (await import(/* webpackChunkName: "help" */ "./help/HelpScreen")).HelpScreen,
} as const satisfies Record<Exclude<Screen, "estimate">, () => Promise<ComponentType>>;

export function App() {
  const [screen, setScreen] = useState<Screen>("estimate");
  const { label, guide } = screens[screen];
  const arrive = useArrival(label);
  const show = useCallback(
    (next: Screen) => {
      setScreen(next);
      // What is there already; the others arrive once they are fetched.
      if (next === "estimate" || next === screen) requestAnimationFrame(arrive);
    },
    [arrive, screen],
  );
  return (
    <>
      <Menu screen={screen} onShow={show} />
      {/* The form keeps what was typed while another screen shows. */}
      <section class="screen" aria-label={screens.estimate.label} hidden={screen !== "estimate"}>
        <EstimateScreen onShowRates={() => show("rates")} />
      </section>
      {screen !== "estimate" && (
        <section class="screen" aria-label={label}>
          <Fetched key={screen} part={fetched[screen]} onArrive={arrive} />
        </section>
      )}
      {guide && (
        <p class="below guide">
          <a href={HELP_FOLDER + guide} target="_blank" rel="noopener">
            How this works
          </a>
        </p>
      )}
    </>
  );
}
