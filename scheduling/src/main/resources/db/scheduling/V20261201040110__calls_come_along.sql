-- Two homes that are one: a call that waits comes along with the visit that it became. Nothing else of it ever changes.
grant update (home_id) on call to ${app};
