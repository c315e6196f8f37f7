#!/bin/sh
# Slurm on this machine alone, for trying array jobs on; as root. Packages of Debian: slurm-wlm munge.
#   slurm-one-machine.sh start DIR    configuration, state and logs go to DIR
#   slurm-one-machine.sh stop DIR
set -eu
action=${1:?start or stop} dir=$(mkdir -p "${2:?a folder}" && cd "$2" && pwd)
export SLURM_CONF="$dir/slurm.conf"
case $action in
start)
    host=$(hostname -s)
    mkdir -p "$dir/state" "$dir/spool"
    cat > "$SLURM_CONF" <<CONF
ClusterName=one
SlurmctldHost=$host(127.0.0.1)
SlurmUser=root
AuthType=auth/munge
CommunicationParameters=NoCtldInAddrAny,NoInAddrAny
StateSaveLocation=$dir/state
SlurmdSpoolDir=$dir/spool
SlurmctldPidFile=$dir/ctld.pid
SlurmdPidFile=$dir/slurmd.pid
SlurmctldLogFile=$dir/ctld.log
SlurmdLogFile=$dir/slurmd.log
ProctrackType=proctrack/linuxproc
TaskPlugin=task/none
JobAcctGatherType=jobacct_gather/none
AccountingStorageType=accounting_storage/none
SelectType=select/cons_tres
SelectTypeParameters=CR_CPU
ReturnToService=2
SchedulerParameters=sched_interval=1
NodeName=$host NodeAddr=127.0.0.1 CPUs=$(nproc) State=UNKNOWN
PartitionName=all Nodes=ALL Default=YES MaxTime=INFINITE State=UP
CONF
    install -d -o munge -g munge -m 755 /run/munge
    runuser -u munge -- munged
    slurmctld -c
    slurmd
    echo "export SLURM_CONF=$SLURM_CONF"
    ;;
stop)
    scontrol shutdown
    kill "$(cat /run/munge/munged.pid)"
    ;;
*)
    echo "start or stop" >&2
    exit 2
    ;;
esac
