/**
 * What several questions share: threads that give the same answer however many, the search for a smallest amount that holds, weather
 * that goes on past its end or is colder, and designs with one thing changed.
 *
 * <p>Each question has a room of its own below. Left out: sentences, tables and pictures.
 */
package org.warmvat.question;
