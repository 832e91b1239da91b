/** The command line: thin commands over the engine. Answers go to standard output, everything else to standard error. */
package org.rickyard.cli;
