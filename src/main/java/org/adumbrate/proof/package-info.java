/**
 * One sheet held open for a page: its text, its pictures, what lies on it, what is to be said of it, and its delivery. Here the rooms
 * within are put together; nothing is drawn, and no command line is known.
 */
package org.adumbrate.proof;
