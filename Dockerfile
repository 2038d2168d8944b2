# The service with its command line. The catalogue lives in the volume /data. Over the demo catalogue,
# with no volume: docker run --rm -p 8080:8080 faying node dist/cli/main.js serve --demo --read-only

FROM node:20-bookworm AS build
RUN apt-get update \
 && apt-get install -y --no-install-recommends python3 make g++ \
 && rm -rf /var/lib/apt/lists/*
WORKDIR /app
# The image brings the headers of its own Node: the SQLite binding is built against those.
ENV npm_config_nodedir=/usr/local
COPY package.json package-lock.json .npmrc ./
RUN npm ci
COPY tsconfig.json tsconfig.build.json ./
COPY src ./src
RUN npm run build && npm prune --omit=dev

FROM node:20-bookworm-slim
ENV NODE_ENV=production \
    FAYING_DATABASE=/data/faying.sqlite \
    FAYING_HOST=0.0.0.0
WORKDIR /app
COPY --from=build /app/package.json ./
COPY --from=build /app/node_modules ./node_modules
COPY --from=build /app/dist ./dist
COPY db ./db
COPY openapi ./openapi
COPY LICENSE ./
RUN mkdir /data && chown node:node /data
USER node
VOLUME /data
EXPOSE 8080
HEALTHCHECK --interval=10s --timeout=3s --start-period=20s \
  CMD ["node", "-e", "fetch('http://127.0.0.1:8080/livez').then((answer) => process.exit(answer.ok ? 0 : 1), () => process.exit(1))"]
CMD ["node", "dist/cli/main.js", "serve"]
