// A reader of QR codes where the browser has none of its own: fetched when a code is to be scanned.
import { BarcodeDetector as Reader } from "../../vendor/qr/decode.js";

export const BarcodeDetector = Reader;
