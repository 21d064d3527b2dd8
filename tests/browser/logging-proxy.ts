import { createServer, request as send } from 'node:http';
import { type AddressInfo, connect } from 'node:net';

/** A forward proxy that writes down every request of a browser: pages, workers, the service worker, the browser itself. */
export const startProxy = async () => {
  const seen: string[] = [];
  const server = createServer((request, response) => {
    seen.push(`${request.method} ${request.url}`);
    const onward = send(request.url ?? '', { method: request.method, headers: request.headers }, (answer) => {
      response.writeHead(answer.statusCode ?? 502, answer.headers);
      answer.pipe(response);
    });
    onward.on('error', () => response.writeHead(502).end());
    request.pipe(onward);
  });
  server.on('connect', (request, socket) => {
    seen.push(`CONNECT ${request.url}`);
    const [host, port] = (request.url ?? '').split(':');
    const onward = connect(Number(port), host ?? '', () => {
      socket.write('HTTP/1.1 200 OK\r\n\r\n');
      onward.pipe(socket);
      socket.pipe(onward);
    });
    onward.on('error', () => socket.destroy());
    socket.on('error', () => onward.destroy());
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  return {
    seen,
    /** For playwright's `proxy`; <-loopback> sends localhost through it too. */
    proxy: { server: `http://127.0.0.1:${(server.address() as AddressInfo).port}`, bypass: '<-loopback>' },
    stop: () =>
      new Promise<void>((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
};
