import type { Dispatcher } from 'undici';

export interface PolitenessRule {
  /** The only origin that may be asked, also after a redirect. */
  readonly origin: string;
  /** Least time between the starts of two requests. [ms] */
  readonly spacingMs: number;
  /** Longest time for a whole answer once it has been asked for. [ms] */
  readonly deadlineMs: number;
  readonly clockMs: () => number;
}

/**
 * The innermost interceptor, passed by requests that really go out: it keeps them on the one origin, apart from each other and
 * within a time limit. A range request is refused: it would be undici's retry gluing two forecasts together.
 */
export function politeness(rule: PolitenessRule): Dispatcher.DispatcherComposeInterceptor {
  let freeAtMs = 0;
  return (dispatch) => (options, handler) => {
    if (options.origin === undefined || new URL(options.origin).origin !== rule.origin) {
      throw new Error(`The service redirected to another host than ${rule.origin}.`);
    }
    if (options.headers !== undefined && options.headers !== null && 'range' in options.headers) {
      throw new Error('The answer broke off.');
    }
    const nowMs = rule.clockMs();
    const startMs = Math.max(nowMs, freeAtMs);
    freeAtMs = startMs + rule.spacingMs;
    const limited = withDeadline(handler, rule.deadlineMs);
    if (startMs <= nowMs) return dispatch(options, limited);
    setTimeout(() => dispatch(options, limited), startMs - nowMs);
    return true;
  };
}

function withDeadline(handler: Dispatcher.DispatchHandler, deadlineMs: number): Dispatcher.DispatchHandler {
  let timer: NodeJS.Timeout | undefined;
  return {
    onRequestStart(controller, context) {
      timer = setTimeout(() => controller.abort(new Error(`No whole answer within ${deadlineMs} ms.`)), deadlineMs);
      handler.onRequestStart?.(controller, context);
    },
    onResponseStart: (controller, status, headers, words) =>
      handler.onResponseStart?.(controller, status, headers, words),
    onResponseData: (controller, chunk) => handler.onResponseData?.(controller, chunk),
    onResponseEnd(controller, trailers) {
      clearTimeout(timer);
      handler.onResponseEnd?.(controller, trailers);
    },
    onResponseError(controller, error) {
      clearTimeout(timer);
      handler.onResponseError?.(controller, error);
    },
  };
}
