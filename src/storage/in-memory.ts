// In the place of IndexedDB where a browser has none: every global of it, kept in memory and gone with the page.
import 'fake-indexeddb/auto';
