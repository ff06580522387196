package org.adumbrate.proof.http;

import org.adumbrate.json.JsonObject;

/**
 * What was asked, by somebody who was let in.
 *
 * @param path as it was sent, with nothing decoded
 * @param query what follows it
 * @param body what was posted; empty for what is only fetched
 */
public record Ask(String path, Query query, JsonObject body) {}
