import { inWorkbook } from "./trouble";

/**
 * Tells the address of the selection, now and whenever it changes.
 *
 * @param tell called with an address such as `Estimate!B4`; "" where the host tells none.
 * @returns a function that ends it.
 */
export async function watchSelection(tell: (address: string) => void): Promise<() => Promise<void>> {
  const read = async () => {
    // The selection may be a picture or a chart, which has no address; that is no trouble for anybody.
    tell(await inWorkbook(selectedAddress).catch(() => ""));
  };
  const registered = await inWorkbook(async (context) => {
    const result = context.workbook.onSelectionChanged.add(read);
    await context.sync();
    return result;
  });
  await read();
  return () =>
    inWorkbook(async () => {
      registered.remove();
      await registered.context.sync();
    });
}

async function selectedAddress(context: Excel.RequestContext): Promise<string> {
  const corner = context.workbook.getSelectedRange().getCell(0, 0);
  corner.load("address");
  await context.sync();
  return corner.address;
}
