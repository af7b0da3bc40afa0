// Fetched by a first script, as on the practice page.
void import("./openWhole");
