/**
 * One page for whoever installs the add-in for everybody.
 *
 * @param {{ origin: string, version: string }} place
 */
export function installGuide({ origin, version }) {
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'self'; base-uri 'none'; form-action 'none'">
<title>Installing Bedrow ${version}</title>
<link rel="stylesheet" href="help/help.css">
</head>
<body>
<main>
<h1>Installing Bedrow ${version} for the office</h1>
<p>This folder is the whole add-in, made for <strong>${origin}</strong>. It is static: no program runs on the host, no
database is needed, and nothing of a workbook is sent to it. The practice workbook is not in it.</p>
<h2>Put it on the host</h2>
<ol>
<li>Copy everything in this folder to the root of ${origin}, so that ${origin}/pane.html opens.</li>
<li>Serve it over https with a certificate that the office's machines trust, without a redirect and without a login page.</li>
<li>Serve .html as text/html, .js as text/javascript, .css as text/css, .json as application/json, .png as image/png.</li>
<li>Let browsers keep files for a day at most, so that an update arrives.</li>
</ol>
<h2>Give it out</h2>
<ol>
<li>Give <code>manifest.xml</code> to whoever administers the office's spreadsheet program, to be given out centrally to
those who estimate. For one person, it can be loaded by hand under My Add-ins.</li>
</ol>
<h2>Which programs can run it</h2>
<div class="wide" role="group" tabindex="0" aria-label="Table: Excel, Can it run Bedrow"><table>
<thead><tr><th scope="col">Excel</th><th scope="col">Can it run Bedrow</th></tr></thead>
<tbody>
<tr><td>Microsoft 365 on Windows</td><td>yes, from Version 2108 on</td></tr>
<tr><td>on a Mac</td><td>yes, from Version 16.52 on</td></tr>
<tr><td>in the browser</td><td>yes</td></tr>
<tr><td>bought once, 2021 or later, on Windows</td><td>it should; bought at retail from Version 2311 on</td></tr>
<tr><td>2019 and older</td><td>no</td></tr>
<tr><td>on an iPad or a phone</td><td>no</td></tr>
</tbody>
</table></div>
<p>This is what the program's publisher lists, and not what was tried (see the cautions below). A program that cannot run it
does not offer it. For the administrator: the manifest asks for the requirement sets SharedRuntime 1.1,
CustomFunctionsRuntime 1.3 and ExcelApi 1.14; where they are is listed at
learn.microsoft.com/javascript/api/requirement-sets.</p>
<h2>Try it</h2>
<ol>
<li>In a new workbook type <code>=BED.FEET("18' 6""")</code>: it gives 18.5.</li>
<li>Open the pane from the ribbon, type a bed, press Insert, then Take back.</li>
<li>Save the workbook, open it on a machine without the add-in: the last results show. For people without the add-in, use
“Copy for others”.</li>
</ol>
<h2>The office's own templates</h2>
<p>Put template files into the folder <code>templates</code> on the host and name each in
<code>templates/index.json</code>; the pane offers them under “Templates”. A file that cannot be read, or that would reach
out of the workbook, is refused by name.</p>
<h2>Update and remove</h2>
<ol>
<li>Make the new folder with a higher version, copy it over the old one (keep <code>templates</code>), and give out its
manifest.</li>
<li>To remove it, withdraw the manifest. Workbooks keep their last results; make plain copies first of those that go on.
What else stays in workbooks and browsers, and how to clear it, stands in <a href="help/in-the-office.html">the guide</a>.</li>
</ol>
<h2>What it asks of the network</h2>
<p>Its own files from ${origin}, and the spreadsheet program's office.js from its maker's address. Nothing else, and nothing
is sent.</p>
<h2>Cautions</h2>
<p>The add-in reminds of buried lines, private ones too, of meters, silica dust, lifting, loads and water. It replaces no ticket, no local code and no
licensed practice. It has not been run in a licensed spreadsheet program by those who made it: try it with a few people
before everybody gets it.</p>
</main>
</body>
</html>
`;
}
