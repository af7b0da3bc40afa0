import { useEffect, useState } from "preact/hooks";
import { TextField } from "../Field";
import { ReadOut } from "../ReadOut";
import { HELP_FOLDER } from "../screens";
import { fetchContents, fetchParts, type HelpGroup, type HelpPage } from "./contents";
import { type Answers, type HelpSearch, helpSearch } from "./search";

/** The guide and the functions, listed and searched in full; each page opens in its own window. */
export function HelpScreen() {
  const [groups, setGroups] = useState<readonly HelpGroup[]>();
  const [search, setSearch] = useState<HelpSearch>();
  const [failed, setFailed] = useState(false);
  const [looked, setLooked] = useState("");
  useEffect(() => {
    Promise.all([fetchContents(), fetchParts()]).then(
      ([contents, parts]) => {
        setGroups(contents);
        setSearch(() => helpSearch(parts));
      },
      () => setFailed(true),
    );
  }, []);
  const found = looked.trim() === "" ? undefined : search?.(looked);
  const count = (groups ?? []).reduce((total, { pages }) => total + pages.length, 0);
  const summary = !groups ? "Loading…" : found ? answerWords(found) : `${count} pages. Each opens in its own window.`;
  return (
    <>
      <header>
        <h1>Help</h1>
      </header>
      <TextField
        label="Search"
        value={looked}
        placeholder="a question, such as round to half tons"
        onType={setLooked}
      />
      <p role="alert" class="notice trouble">
        {failed && "Help couldn't be loaded. Check your connection, then try again."}
      </p>
      <p class="below">{failed ? "" : summary}</p>
      <ReadOut text={failed ? "" : summary} />
      {found ? (
        <Pages pages={found.answers} />
      ) : (
        groups?.map(({ title, pages }) => (
          <section key={title} aria-label={title}>
            <h2>{title}</h2>
            <Pages pages={pages} />
          </section>
        ))
      )}
    </>
  );
}

function Pages({ pages }: { pages: readonly HelpPage[] }) {
  return (
    <dl class="cautions">
      {pages.map(({ address, title, about }) => [
        <dt key={address}>
          <a href={HELP_FOLDER + address} target="_blank" rel="noopener">
            {title}
          </a>
        </dt>,
        <dd key={`${address} about`}>{about}</dd>,
      ])}
    </dl>
  );
}

function answerWords({ isWhole, answers }: Answers): string {
  if (answers.length === 0) return "Type what you're looking for.";
  if (!isWhole) return `Nothing has all of those words. Here ${answers.length === 1 ? "is" : "are"} the closest.`;
  return `${answers.length} ${answers.length === 1 ? "answer" : "answers"}. Each opens in its own window.`;
}
