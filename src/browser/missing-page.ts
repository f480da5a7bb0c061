import { mendAddress } from "./mend-address.ts";

const mended = mendAddress(location.href);
if (mended !== undefined) location.replace(mended);
