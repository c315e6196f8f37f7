/**
 * The tank on a page in the browser: a server for this machine alone, and what it answers.
 *
 * <p>Entry types: {@link org.warmvat.cli.page.PageServer} and {@link org.warmvat.cli.page.Questions}, by which it asks what the
 * command line asks. The page itself (HTML, style, scripts) lies among the resources of the same name. Left out: the command, and
 * every sentence of an answer: both come from where the command line has them.
 */
package org.warmvat.cli.page;
