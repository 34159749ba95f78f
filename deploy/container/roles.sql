-- The roles and databases of Changeover on a PostgreSQL 18 started apart:
--   psql -v owner_password=… -v app_password=… -v lookup_password=… -v keycloak_password=… -f roles.sql
-- The owner keeps the tables and runs the migrations; it bypasses row security, or a data migration would silently change nothing.
-- The application runs as changeover_app, which owns nothing and bypasses nothing; changeover_lookup reads before a
-- business is known, and keeps the forms whose session has ended.
create role changeover_owner login bypassrls password :'owner_password';
create role changeover_app login password :'app_password';
create role changeover_lookup login password :'lookup_password';
create role keycloak login password :'keycloak_password';
create database changeover owner changeover_owner;
create database keycloak owner keycloak;
revoke connect, temporary on database changeover from public;
revoke connect, temporary on database keycloak from public;
revoke connect, temporary on database postgres from public;
grant connect on database changeover to changeover_app;
grant connect on database changeover to changeover_lookup;
