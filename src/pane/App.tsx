import type { ComponentType } from "preact";
import { useEffect, useState } from "preact/hooks";
import { EstimateScreen } from "./EstimateScreen";

type Screen = "estimate" | "check";

const screens: readonly { readonly screen: Screen; readonly label: string }[] = [
  { screen: "estimate", label: "Estimate a bed" },
  { screen: "check", label: "Check the sheets" },
];

export function App() {
  const [screen, setScreen] = useState<Screen>("estimate");
  return (
    <>
      <nav aria-label="What to do">
        {screens.map((one) => (
          <button
            key={one.screen}
            type="button"
            aria-current={one.screen === screen ? "page" : undefined}
            onClick={() => setScreen(one.screen)}
          >
            {one.label}
          </button>
        ))}
      </nav>
      {/* The form keeps what was typed while the other screen shows. */}
      <div hidden={screen !== "estimate"}>
        <EstimateScreen />
      </div>
      {screen === "check" && <CheckWhenFetched />}
    </>
  );
}

/** The check is fetched when it is first wanted: the add-in's first load stays small. */
function CheckWhenFetched() {
  const [Check, setCheck] = useState<ComponentType>();
  useEffect(() => {
    void import(/* webpackChunkName: "check" */ "./check/CheckScreen").then(({ CheckScreen }) =>
      setCheck(() => CheckScreen),
    );
  }, []);
  return Check ? <Check /> : <p class="notice">Fetching the check…</p>;
}
