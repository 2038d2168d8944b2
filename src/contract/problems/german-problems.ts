/**
 * What each type of problem means, in German: its title, and what whoever meets it should know.
 */

import { LIMITS } from '../limits.js';
import type { ProblemTypeWords } from './problem-words.js';

export const GERMAN_PROBLEMS: ProblemTypeWords = {
  'invalid-request': {
    title: 'Die Anfrage hat nicht die richtige Form',
    about:
      'Ein Parameter oder Feld fehlt, ist unbekannt, steht zweimal da oder ist nicht von der ' +
      'richtigen Art. „errors“ nennt sie alle, nach dem Parameter der URL oder mit einem ' +
      'JSON-Zeiger in den Rumpf.',
  },
  'invalid-cursor': {
    title: 'Die Liste geht von hier aus nicht weiter',
    about:
      'Ein `cursor` ist `next` aus einer Antwort, gefragt mit denselben Filtern, aus einer ' +
      'Ausgabe, die es noch gibt. Zu beginnen ist mit der ersten Seite: ohne `cursor` fragen.',
  },
  'malformed-json': {
    title: 'Der Rumpf ist kein JSON',
    about:
      'Der Rumpf ist kein JSON-Text in UTF-8 (RFC 8259). „detail“ sagt, wo er aufhört, einer zu ' +
      'sein.',
  },
  'malformed-request': {
    title: 'Die Anfrage ist nicht zu lesen',
    about:
      'Was ankam, ist keine HTTP-Anfrage, hat keinen gültigen Host oder keine gültige URL oder ' +
      'endete zu früh.',
  },
  'unknown-path': {
    title: 'Unter diesem Pfad gibt es nichts',
    about: 'Der Dienst hat nichts unter diesem Pfad. GET /openapi.json führt auf, was es gibt.',
  },
  'unknown-problem': {
    title: 'Diese Art von Problem gibt es nicht',
    about: 'GET /problems führt die Arten von Problemen auf, die es gibt.',
  },
  'unknown-edition': {
    title: 'Diese Ausgabe gibt es nicht',
    about: 'Ausgaben zählen 1, 2, 3 und so weiter; GET /v1/editions führt sie auf.',
  },
  'unknown-vehicle': {
    title: 'Dieses Fahrzeug gibt es nicht',
    about: 'Diese Ausgabe hat kein Fahrzeug mit dieser Kennung.',
  },
  'vehicle-replaced': {
    title: 'An die Stelle dieses Fahrzeugs traten genauere',
    about:
      'Das Fahrzeug war grob erfasst, und inzwischen traten andere an seine Stelle: `candidates` ' +
      'in „errors“ hat sie alle. „ask“ sagt, wonach zu fragen ist, um sie zu ' +
      'unterscheiden; eine Ausgabe von vorher antwortet noch für das alte.',
  },
  'unknown-part': {
    title: 'Dieses Teil gibt es nicht',
    about:
      'Diese Ausgabe hat kein Teil mit dieser Kennung, Nummer oder Bestellnummer. Ein Teil, das ' +
      'niemand erfasst hat, ist unbekannt, nicht unpassend.',
  },
  'ambiguous-part': {
    title: 'Der Name steht für mehr als ein Teil',
    about:
      'Zwei Hersteller können dieselbe Nummer aufdrucken, und zwei Teile können unter einer ' +
      'Bestellnummer angeboten sein. Keines davon gilt von selbst: `candidates` in „errors“ hat ' +
      'sie alle. Zu nennen ist die Kennung des Teils oder die Nummer mit dem Hersteller, wie in ' +
      'number:44/10-077@maker.',
  },
  'unknown-layout': {
    title: 'Diese Bauweise gibt es nicht',
    about: 'Diese Ausgabe hat keine Bauweise mit dieser Kennung; GET /v1/layouts führt sie auf.',
  },
  'unknown-role': {
    title: 'Diese Rolle gibt es nicht',
    about: 'Diese Ausgabe hat keine Rolle mit dieser Kennung; GET /v1/roles führt sie auf.',
  },
  'unknown-kind': {
    title: 'Diese Art von Anschluss gibt es nicht',
    about:
      'Eine Art mit dieser Kennung ist weder eingebaut noch in dieser Ausgabe erklärt; ' +
      'GET /v1/kinds führt sie auf.',
  },
  'unknown-calculation': {
    title: 'Diesen Rechner gibt es nicht',
    about: 'Kein Rechner heißt so; GET /v1/calculate führt alle auf.',
  },
  'unknown-key': {
    title: 'Der Schlüssel ist nicht bekannt',
    about:
      'Die Kopfzeile Authorization sagt `Bearer` und einen Schlüssel, und der ist keiner ' +
      'dieses Dienstes, oder er gilt nicht mehr. Ohne Schlüssel antwortet der Dienst, was für ' +
      'alle offen ist.',
  },
  'key-needed': {
    title: 'Dazu braucht es einen Schlüssel',
    about:
      'Das ist nicht für alle offen. Schlüssel gibt, wer den Dienst betreibt; man schickt ihn ' +
      'als `Authorization: Bearer` und den Schlüssel, nie in einer URL.',
  },
  'not-granted': {
    title: 'Wer fragt, darf das nicht',
    about:
      'Der Schlüssel hat das Recht dazu nicht, er ist für andere Seiten, oder die gewünschte ' +
      'Sicht hat nichts von dieser Frage. „errors“ sagt, welches Recht oder welche Sicht es ' +
      'braucht.',
  },
  'method-not-allowed': {
    title: 'Diese Methode ist nicht für diesen Pfad',
    about: 'Die Kopfzeile Allow der Antwort nennt die Methoden, die der Pfad nimmt.',
  },
  'not-acceptable': {
    title: 'In dieser Form ist die Antwort nicht zu haben',
    about:
      'Antworten sind application/json, die eines Stapels application/x-ndjson oder text/csv, ' +
      'und die Kopfzeile Accept der Anfrage schließt das aus.',
  },
  'request-timeout': {
    title: 'Die Anfrage kam nicht rechtzeitig an',
    about:
      'Der Dienst hat auf den Rest der Anfrage gewartet und aufgegeben; „limit“ sagt, wie lange.',
  },
  'body-too-large': {
    title: 'Der Rumpf ist zu groß',
    about:
      `Ein Rumpf hat höchstens ${LIMITS.bodyBytes.value} Byte. Ein Stapel darf größer sein, ` +
      `aber keine seiner Zeilen größer als ${LIMITS.batchLineBytes.value}. „limit“ sagt, welche ` +
      'Grenze überschritten ist.',
  },
  'url-too-long': {
    title: 'Die URL ist zu lang',
    about:
      `Pfad und Frage haben höchstens ${LIMITS.urlBytes.value} Byte; „limit“ sagt es. POST nimmt ` +
      'dieselben Fragen im Rumpf.',
  },
  'unsupported-media-type': {
    title: 'Ein Rumpf dieser Art wird hier nicht gelesen',
    about:
      'Ein Rumpf ist application/json in UTF-8, unkomprimiert; der eines Stapels ist ' +
      'application/x-ndjson oder text/csv und darf mit gzip gepackt sein.',
  },
  'expectation-failed': {
    title: 'Die Erwartung ist nicht zu erfüllen',
    about: 'Die Kopfzeile Expect darf 100-continue sagen und sonst nichts.',
  },
  'unknown-position': {
    title: 'Diesen Einbauplatz hat das Fahrzeug nicht',
    about:
      'Die Bauweise dieses Fahrzeugs hat keinen Einbauplatz mit dieser Kennung. „errors“ sagt, ' +
      'welcher wohl gemeint war.',
  },
  'unknown-interface': {
    title: 'Diesen Anschluss hat das Teil nicht',
    about: 'Von dem Teil ist kein Anschluss dieses Namens erfasst.',
  },
  'invalid-question': {
    title: 'Gefragt ist nach etwas, das nicht sein kann',
    about:
      'Jedes Feld hat die richtige Form, doch nicht alles davon kann so sein: ein Drehmoment ' +
      'ohne Einheit, drei Adapter, wo einer hingehört, oder mehreres, das es nicht gibt. ' +
      '„errors“ sagt, was.',
  },
  'headers-too-large': {
    title: 'Die Kopfzeilen sind zu groß',
    about: 'Die erste Zeile der Anfrage und die Kopfzeilen sind mehr, als der Dienst liest.',
  },
  'internal-error': {
    title: 'Im Inneren ist etwas schiefgegangen',
    about:
      'Ein Fehler des Dienstes, nicht der Frage. Er steht im Protokoll, unter der Kennung, die ' +
      '„instance“ nennt: die Betreiber des Dienstes brauchen sie.',
  },
  'no-edition': {
    title: 'Es ist noch nichts veröffentlicht',
    about:
      'Der Dienst hat keine Ausgabe eines Katalogs, aus der er antworten könnte. Die Betreiber ' +
      'geben ihm eine mit „faying publish“.',
  },
  'store-fault': {
    title: 'Der Katalog ist nicht zu lesen',
    about:
      'Was gespeichert ist, lässt sich nicht verwenden. Was daran falsch ist und was hilft, ' +
      'steht im Protokoll, unter der Kennung, die „instance“ nennt.',
  },
  stopping: {
    title: 'Der Dienst wird gerade beendet',
    about: 'Er beantwortet, was er begonnen hat, und nimmt nichts Neues an: einen anderen fragen.',
  },
};
