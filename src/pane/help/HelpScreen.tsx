import { useEffect, useState } from "preact/hooks";
import { TextField } from "../Field";
import { ReadOut } from "../ReadOut";
import { HELP_FOLDER } from "../screens";
import { fetchContents, found, type HelpGroup } from "./contents";

/** The guide and the functions, to look through; each page opens in a window of its own. */
export function HelpScreen() {
  const [groups, setGroups] = useState<readonly HelpGroup[]>();
  const [failed, setFailed] = useState(false);
  const [looked, setLooked] = useState("");
  useEffect(() => {
    fetchContents().then(setGroups, () => setFailed(true));
  }, []);
  const shown = found(groups ?? [], looked);
  const count = shown.reduce((total, { pages }) => total + pages.length, 0);
  const summary = groups ? foundWords(count) : "Loading…";
  return (
    <>
      <header>
        <h1>Help</h1>
      </header>
      <TextField label="Search" value={looked} placeholder="such as tape, stone or pins" onType={setLooked} />
      <p role="alert" class="notice trouble">
        {failed && "Help couldn't be loaded. Check your connection, then try again."}
      </p>
      <p class="below">{failed ? "" : summary}</p>
      <ReadOut text={failed ? "" : summary} />
      {shown.map(({ title, pages }) => (
        <section key={title} aria-label={title}>
          <h2>{title}</h2>
          <dl class="cautions">
            {pages.map(({ address, title: name, about }) => [
              <dt key={address}>
                <a href={HELP_FOLDER + address} target="_blank" rel="noopener">
                  {name}
                </a>
              </dt>,
              <dd key={`${address} about`}>{about}</dd>,
            ])}
          </dl>
        </section>
      ))}
    </>
  );
}

function foundWords(count: number): string {
  if (count === 0) return "No page has all of these words. Try fewer of them.";
  return `${count} ${count === 1 ? "page" : "pages"}, each opens in its own window.`;
}
