-- Two homes that are one: shut times, handovers and stops that still hold come along. Nothing else of them ever changes.
grant update (home_id) on home_shut, home_handover, machine_stop to ${app};
