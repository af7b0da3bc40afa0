/**
 * One page for whoever installs the add-in for everyone.
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
<p>This folder is the whole add-in, built for <strong>${origin}</strong>. It's static files only: no server program, no
database, and no workbook data is ever sent to it. The practice workbook isn't included.</p>
<h2>Put it on your web host</h2>
<ol>
<li>Copy everything in this folder to the root of ${origin}, so that ${origin}/pane.html opens.</li>
<li>Serve it over https with a certificate your office's computers trust. No redirects and no login page.</li>
<li>Serve .html as text/html, .js as text/javascript, .css as text/css, .json as application/json, .png as image/png.</li>
<li>Let browsers cache files for a day at most, so updates get through.</li>
</ol>
<h2>Deploy it</h2>
<ol>
<li>Give <code>manifest.xml</code> to your Microsoft 365 administrator to deploy to everyone who estimates. For one
person, you can load it by hand under My Add-ins.</li>
</ol>
<h2>Which versions run it</h2>
<div class="wide" role="group" tabindex="0" aria-label="Table: Excel, Runs Bedrow?"><table>
<thead><tr><th scope="col">Excel</th><th scope="col">Runs Bedrow?</th></tr></thead>
<tbody>
<tr><td>Microsoft 365 on Windows</td><td>yes, Version 2108 or later</td></tr>
<tr><td>on a Mac</td><td>yes, Version 16.52 or later</td></tr>
<tr><td>in the browser</td><td>yes</td></tr>
<tr><td>one-time purchase, 2021 or later, on Windows</td><td>it should; retail copies need Version 2311 or later</td></tr>
<tr><td>2019 or older</td><td>no</td></tr>
<tr><td>on an iPad or a phone</td><td>no</td></tr>
</tbody>
</table></div>
<p>This is what the publisher lists, not what we've tested (see the cautions below). A version that can't run the add-in
doesn't offer it. For administrators: the manifest requires SharedRuntime 1.1, CustomFunctionsRuntime 1.3, and
ExcelApi 1.14; see learn.microsoft.com/javascript/api/requirement-sets.</p>
<h2>Try it</h2>
<ol>
<li>In a new workbook, type <code>=BED.FEET("18' 6""")</code>: you should get 18.5.</li>
<li>Open the pane from the ribbon, type a bed, press Insert, then Undo.</li>
<li>Save the workbook and open it on a computer without the add-in: it shows the last results. For people who don't have
the add-in, use “Copy for others”.</li>
</ol>
<h2>Your own templates</h2>
<p>Put template files in the <code>templates</code> folder on the host and list each one in
<code>templates/index.json</code>. The pane shows them under “Templates”. If a file can't be read, or would reach outside
the workbook, the pane says which one and skips it.</p>
<h2>Update and remove</h2>
<ol>
<li>Build the new folder with a higher version number, copy it over the old one (keep <code>templates</code>), and deploy
its manifest.</li>
<li>To remove it, withdraw the manifest. Workbooks keep their last results; make plain copies first of any you'll keep
using. <a href="help/in-the-office.html">The guide</a> says what else stays in workbooks and browsers, and how to clear it.</li>
</ol>
<h2>What it needs from the network</h2>
<p>Its own files from ${origin}, and office.js from the publisher's address. Nothing else, and it sends nothing.</p>
<h2>Cautions</h2>
<p>The add-in reminds you about buried lines (private ones too), meters, silica dust, lifting, loads, and water. It doesn't
replace your utility ticket, local codes, or licensed practice. Its makers haven't run it in a licensed spreadsheet
program: try it with a few people before you deploy it to everyone.</p>
</main>
</body>
</html>
`;
}
