import { useEffect, useState } from "preact/hooks";
import type { Template } from "../../sheets/templates/template";
import { Button } from "../Button";
import { type OfficeFolder, officeFolder } from "./officeFolder";
import { sizeWords } from "./words";

interface OfficeListProps {
  readonly working: boolean;
  readonly onOpen: (template: Template) => void;
}

/** The templates that the office offers to everyone; nothing where it offers none. */
export function OfficeList({ working, onOpen }: OfficeListProps) {
  const [folder, setFolder] = useState<OfficeFolder>();
  useEffect(() => {
    let wanted = true;
    void officeFolder().then((found) => wanted && setFolder(found));
    return () => {
      wanted = false;
    };
  }, []);
  if (!folder || (folder.templates.length === 0 && !folder.trouble)) return null;
  return (
    <>
      <h2>From the office</h2>
      {folder.trouble && <p class="notice trouble">{folder.trouble}</p>}
      {folder.templates.map(({ file, template, why }) => (
        <div class="kept" key={file}>
          {template ? (
            <p class="row">
              <span class="grow">
                {template.name}
                <span class="below"> {sizeWords(template)}</span>
              </span>
              <Button label={`Preview ${template.name}`} off={working} onPress={() => onOpen(template)}>
                Preview
              </Button>
            </p>
          ) : (
            <p class="notice trouble">
              {file} can't be opened. {why?.join(" ")}
            </p>
          )}
        </div>
      ))}
    </>
  );
}
