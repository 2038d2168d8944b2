/**
 * What each limit is the most of, in German, and what becomes of more where it is not refused.
 */

import type { LimitWords } from './problem-words.js';

export const GERMAN_LIMITS: LimitWords = {
  urlBytes: 'Pfad und Frage einer URL zusammen; POST nimmt dieselben Fragen im Rumpf.',
  headerBytes: 'Die URL und die Namen und Werte aller Kopfzeilen zusammen.',
  headerCount: 'Kopfzeilen einer Anfrage.',
  bodyBytes: 'Ein Rumpf.',
  arrivalMs: 'Die Zeit, bis eine Anfrage ganz angekommen ist.',
  stallMs:
    'Die Zeit, in der kein Byte einer Antwort abgenommen wird; dann wird die Verbindung gekappt.',
  batchLineBytes:
    'Eine Zeile eines Stapels, mit allen, über die sie geht; die anderen werden beantwortet.',
  gzipExpansion:
    'Das Wievielfache seiner Größe ein gepackter Stapel ergibt, wenn es über ein Megabyte ist.',
  bodyValues: 'Werte in einem Rumpf, Listen und Objekte mitgezählt.',
  bodyLevels: 'Listen und Objekte ineinander in einem Rumpf.',
  placesInUrl: 'Parameter einer Gruppe wie `with.<position>` in einer URL; POST nimmt mehr.',
  placesInBody: 'Einbauplätze, Verbindungen oder Merkmale, die ein Feld eines Rumpfes nennt.',
  adaptersInRow: 'Adapter hintereinander in einer Verbindung; sie selbst nimmt vielleicht weniger.',
  nameCharacters: 'Der Name eines Fahrzeugs, eines Teils, eines Anschlusses oder ein Merkmalswert.',
  refCharacters: 'Die Angabe `ref`, an der eine Zeile eines Stapels wiederzuerkennen ist.',
  placeCharacters: 'Die Kennung eines Einbauplatzes, einer Verbindung oder eines Merkmals.',
  valueCharacters:
    'Ein Wert mit Einheit: ein Drehmoment oder ein Maß eines ausgeschriebenen Anschlusses.',
  languageTagCharacters: 'Die Sprachangabe in `lang`.',
  numberDigits: 'Ziffern einer Zahl in einem Wert.',
  faceAlternatives:
    'Arten, auf die ein ausgeschriebener Anschluss sein kann, jedes wählbare Maß gezählt.',
  facePoints: 'Punkte eines Lochbilds in einem ausgeschriebenen Anschluss.',
  wants: 'Wünsche einer Umbaufrage, und Teile, von denen eines gewünscht ist.',
  wantsInUrl: 'Wünsche einer Umbaufrage in einer URL; POST nimmt mehr.',
  kitEntries:
    'Was eine Liste einer Frage nennt: Gemessenes; was bleibt, zu meiden oder da ist; Posten.',
  ownOffers: 'Eigene Preise, die eine Umbaufrage mitbringt.',
  ownedPieces: 'Stück eines Teils, die vorhanden sind.',
  stockPieces: 'Stück eines eigenen Angebots auf Lager.',
  leadDays: 'Tage, bis etwas da ist.',
  routes: 'Wege, nach denen eine Umbaufrage fragt.',
  drivenRoutes: 'Wege, deren Fahren nebeneinander gesagt wird.',
  drivenLines: 'Posten eines Umbaus, dessen Fahren gesagt wird.',
  routeKeyCharacters: 'Der Schlüssel eines Wegs.',
  kitSteps: 'Schritte der Suche nach Wegen; bräuchte eine Antwort mehr, so sagt es `complete`.',
  listEntries: 'Einträge auf einer Seite einer Liste.',
  cursorCharacters: 'Der Zeiger, mit dem eine Liste weitergeht.',
  requestIdCharacters:
    'Eine `X-Request-Id`, die übernommen wird; eine längere wird durch eine eigene ersetzt.',
  graphqlTokens: 'Wörter und Zeichen eines Dokuments von GraphQL.',
  graphqlBrackets: 'Klammern ineinander, gleich welche, in einem Dokument von GraphQL.',
  graphqlLevels: 'Wie tief ein Dokument von GraphQL auswählt, mit allem, was es einfügt.',
  graphqlFields: 'Felder und Anweisungen eines Dokuments von GraphQL, mit allem, was es einfügt.',
  graphqlCost:
    'Was die Fragen einer Anfrage von GraphQL kosten: ein Eintrag 1, ein Teil an einem Fahrzeug ' +
    '2, eine Suche nach Änderungen 20.',
  namesLookedUp:
    'Teile oder Fahrzeuge, die zugleich genannt werden; vorher kann die URL voll sein.',
  fitsSolved: 'Einträge einer Liste dessen, was passt, für die Änderungen gesucht werden.',
  vehiclesJudged:
    'Fahrzeuge, die eine Frage meinen kann, die sagt, was von einem bekannt ist: bei mehr wird ' +
    'zuerst gefragt, was sie unterscheidet.',
  vehiclesSolved:
    'Davon diejenigen, die etwas unterscheidet und für die Änderungen gesucht werden.',
  wishCharacters: 'Was von `Accept` und von `Accept-Language` gelesen wird, der Rest nicht.',
  faultsTold: 'Fehler einer Anfrage, die ein Problem in `errors` aufzählt; der Rest fehlt dort.',
};
