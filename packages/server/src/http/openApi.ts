import type { OpenAPIHono } from '@hono/zod-openapi';

/** The OpenAPI 3.1 document, from the same schemas that read the requests. */
export function openApiDocument(app: OpenAPIHono) {
  return app.getOpenAPI31Document({
    openapi: '3.1.0',
    info: {
      title: 'Evenfall',
      version: '0.1.0',
      description:
        'Vital signs taken by hand, kept with their evidence. Evenfall supports trained people; it does not diagnose and does not replace local protocol.',
      license: { name: 'Apache-2.0' },
    },
  });
}
