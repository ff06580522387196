/**
 * The stages of a build in order: what each needs, what it makes, how far it has come. No stage is computed here;
 * each is asked of the room it belongs to.
 */
package org.adumbrate.build;
