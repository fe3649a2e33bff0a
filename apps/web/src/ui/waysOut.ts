/** Ways out of the page: a file to save, a sheet to print. Everything stays on this machine. */

/** Lets the browser save a text under a name. */
export function saveText(text: string, fileName: string, type: string): void {
  const address = URL.createObjectURL(new Blob([text], { type: `${type};charset=utf-8` }));
  const link = document.createElement("a");
  link.href = address;
  link.download = fileName;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}

/** "Harbour school club, 40 m dipole" and "watts" to "harbour-school-club-40-m-dipole-watts.html". */
export function sheetName(station: string, question: string): string {
  const words = station.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? ["station"];
  return `${words.join("-").slice(0, 60)}-${question}.html`;
}

/** Prints a page of its own without showing it; resolves when the browser's print has been called. */
export function printHtml(html: string): Promise<void> {
  return new Promise((done, failed) => {
    const frame = document.createElement("iframe");
    frame.title = "The answer sheet, for printing";
    frame.className = "print-frame";
    frame.setAttribute("aria-hidden", "true");
    frame.onload = () => {
      const inside = frame.contentWindow;
      if (!inside) return failed(new Error("The sheet could not be opened for printing."));
      inside.onafterprint = () => frame.remove();
      inside.focus();
      inside.print();
      done();
    };
    frame.srcdoc = html;
    document.body.append(frame);
  });
}
